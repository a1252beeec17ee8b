package org.marshlight.compost;

import java.util.List;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Step;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;

/** The heap of a year: one batch, from the mix to what it gives back to land. */
public final class CompostModel {

  private CompostModel() {}

  /**
   * A year of composting.
   *
   * @param design the heap, with all its defaults filled
   * @param fromLoop what the loop brings beside the design's own ingredients
   * @param site the air around the heap
   * @param set the coefficients
   */
  public static CompostOutcome run(
      CompostDesign design, List<Material> fromLoop, CompostSite site, CoefficientSet set) {
    CompostRun run = CompostRun.of(design, fromLoop, site, set);
    CompostEstimate estimate = CompostFigures.of(run);
    return new CompostOutcome(estimate, account(run), CompostNotices.of(run, estimate));
  }

  /**
   * The steps at the design point, each of which can be worked again from the formula book.
   *
   * @param design the heap, with all its defaults filled
   * @param fromLoop what the loop brings beside the design's own ingredients
   * @param site the air around the heap
   * @param set the coefficients
   */
  public static List<Step> working(
      CompostDesign design, List<Material> fromLoop, CompostSite site, CoefficientSet set) {
    return CompostWorking.of(CompostRun.of(design, fromLoop, site, set));
  }

  private static Account account(CompostRun run) {
    Heap heap = run.heap();
    Account.Books books = Account.of(Party.HEAP);
    for (Material material : run.mix().materials()) {
      books.received(material.from(), material.matter());
    }
    return books
        .reactionWater(heap.reactionKg())
        .gave(
            Party.AIR,
            Matter.carbonDioxide(
                    heap.decayed().organicCarbonKg() + run.mix().moist().inorganicCarbonKg())
                .plus(Matter.ammonia(heap.ammoniaKg()))
                .plus(Matter.water(heap.evaporatedKg())))
        .gave(Party.OXYGEN, Matter.oxidised(heap.decayed().codKg()))
        .gave(Party.SOIL, run.leachate())
        .gave(Party.LAND, heap.finished())
        .close();
  }
}
