package org.marshlight.compost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;

/**
 * All that is worked out for one heap, before it is told.
 *
 * @param design the heap, with all its defaults
 * @param site the air around it
 * @param set the coefficients of the run
 * @param mix the materials put together
 * @param method how the heap is run
 * @param heap what becomes of them
 * @param range how hot it gets; empty where there is no heap
 */
record CompostRun(
    CompostDesign design,
    CompostSite site,
    CoefficientSet set,
    Mix mix,
    Method method,
    Heap heap,
    Optional<HeapRange> range) {

  static CompostRun of(
      CompostDesign design, List<Material> fromLoop, CompostSite site, CoefficientSet set) {
    MixCoefficients c = set.bind(MixCoefficients.class);
    Mix mix = Mix.of(materials(design, fromLoop, set), c);
    Method method = Method.of(design.method(), set);
    Heap heap =
        Heap.of(
            mix,
            method,
            c.freeAirLeast(),
            set.bind(DecayCoefficients.class),
            set.bind(HeatCoefficients.class));
    Optional<HeapRange> range =
        mix.empty()
            ? Optional.empty()
            : Optional.of(
                HeapRange.of(batch(mix, method, heap, startMonth(design, site)), site, set));
    return new CompostRun(design, site, set, mix, method, heap, range);
  }

  private static List<Material> materials(
      CompostDesign design, List<Material> fromLoop, CoefficientSet set) {
    List<Material> materials = new ArrayList<>(fromLoop);
    if (design.ingredients() != null) {
      design.ingredients().forEach(each -> materials.add(Material.bought(each, set)));
    }
    return materials;
  }

  private static HeapCourse.Batch batch(Mix mix, Method method, Heap heap, int startMonth) {
    Matter moist = mix.moist().times(method.batchShare());
    return new HeapCourse.Batch(
        moist.waterKg(),
        moist.totalSolidsKg(),
        mix.volumeM3() * method.batchShare(),
        heap.decayed().codKg() * method.batchShare(),
        method.greatestHeightM(),
        startMonth);
  }

  /** A heap is built in autumn; a bin is filled all year, and is hottest in the warmest month. */
  private static int startMonth(CompostDesign design, CompostSite site) {
    return design.method() == CompostMethod.BIN ? site.warmestMonth() : site.autumnMonth();
  }

  /** Mean air temperature of the month in which the heap, or the hottest part, is put together. */
  double startAirC() {
    return site.airTemperatureC().get(startMonth(design, site));
  }

  /** Whether more water came with the materials than a heap can bear, so that it goes airless. */
  boolean tooWet() {
    return !mix.empty()
        && mix.whole().waterKg() > mixing().moistureBearableMost() * mix.whole().freshKg();
  }

  MixCoefficients mixing() {
    return set.bind(MixCoefficients.class);
  }

  DecayCoefficients decay() {
    return set.bind(DecayCoefficients.class);
  }

  ReturnCoefficients returning() {
    return set.bind(ReturnCoefficients.class);
  }

  /** All that leaves to the soil below. */
  Matter leachate() {
    return mix.drained().plus(heap.leached()).plus(Matter.water(heap.drippedKg()));
  }
}
