package org.marshlight.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.marshlight.Studies;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Pointer;
import org.marshlight.loop.Plan;
import org.marshlight.study.ComparisonRequest;
import org.marshlight.study.StudyRequest;
import org.marshlight.study.VariantFault;
import org.marshlight.study.VariantPlan;

/**
 * What a study was asked.
 *
 * @param request the request
 * @param planSha256 hash of its plan in the canonical form of RFC 8785
 */
public record StudyDocument<T extends Record>(StudyRequest<T> request, String planSha256) {

  private static final String PLAN = "plan";
  private static final String VARIANTS = "/variants/";
  private static final String VARIANT_PLAN = "^(/variants/\\d+)/plan(?=/|$)";

  /**
   * Reads a request.
   *
   * @param body bytes in UTF-8
   * @param type the request it should be
   * @throws MalformedJson if they are no JSON document
   * @throws Faults if the document is not such a request, with every fault
   */
  public static <T extends Record, R extends Record & StudyRequest<T>> StudyDocument<T> read(
      byte[] body, Class<R> type) {
    JsonDocument document = JsonDocument.parse(body);
    R request =
        type.equals(ComparisonRequest.class)
            ? type.cast(comparison(document))
            : request(RecordReader.readWhatCanBe(document, type));
    return new StudyDocument<>(request, hash(document.tree()));
  }

  private static <R extends Record & StudyRequest<?>> R request(PartlyRead<R> read) {
    R request = read.record();
    if (!read.faults().isEmpty()) {
      throw new Faults(
          request == null ? read.faults() : Studies.faults(request, request.plan(), read.faults()));
    }
    return request;
  }

  /** Faults of a request with pointers as its document has them: a variant is sent as a patch. */
  public static Faults asSent(Faults faults) {
    return new Faults(
        faults.list().stream()
            .map(
                fault ->
                    new Fault(
                        fault.code(),
                        fault.pointer().replaceFirst(VARIANT_PLAN, "$1/patch"),
                        fault.rejected(),
                        fault.detail(),
                        fault.allowed(),
                        fault.params()))
            .toList());
  }

  private static String hash(JsonNode tree) {
    return tree.hasNonNull(PLAN) ? CanonicalHash.sha256(tree.get(PLAN).toString()) : null;
  }

  private static ComparisonRequest comparison(JsonDocument document) {
    PartlyRead<PatchedComparison> read =
        RecordReader.readWhatCanBe(document, PatchedComparison.class);
    PatchedComparison sent = read.record();
    if (!read.faults().isEmpty()) {
      throw new Faults(
          sent == null ? read.faults() : Studies.faults(sent, sent.plan(), read.faults()));
    }
    if (sent.variants() == null) {
      return new ComparisonRequest(sent.plan(), null, sent.outputs());
    }
    List<VariantPlan> variants = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < sent.variants().size(); i++) {
      PatchedComparison.Variant variant = sent.variants().get(i);
      String pointer = VARIANTS + i + "/patch";
      if (variant.patch() == null) {
        faults.add(Fault.of("json.patch-missing", pointer, null, "an object; {} changes nothing"));
      } else {
        JsonNode patched = MergePatch.apply(document.tree().get(PLAN), variant.patch());
        variants.add(new VariantPlan(variant.name(), plan(patched, variant, pointer, faults)));
      }
    }
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
    return new ComparisonRequest(sent.plan(), List.copyOf(variants), sent.outputs());
  }

  /** The plan of a variant; null with faults if the patch makes no plan. */
  private static Plan plan(
      JsonNode patched, PatchedComparison.Variant variant, String pointer, List<Fault> faults) {
    try {
      return RecordReader.read(
          new JsonDocument(patched.toString(), patched, List.of()), Plan.class, pointer);
    } catch (Faults wrong) {
      wrong
          .list()
          .forEach(fault -> faults.add(VariantFault.of(fault, variant.name(), Pointer.ROOT)));
      return null;
    }
  }
}
