package org.marshlight.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.marshlight.loop.Plan;

/** What the records say of themselves, and the places in them. */
class RecordShapeTest {

  @Test
  void jakartaAnnotationsAreSeenToo() {
    RecordShape plan = RecordShape.of(Plan.class);
    assertThat(plan.field("site").orElseThrow().required()).isTrue();
    assertThat(plan.field("tank").orElseThrow().required()).isFalse();
    assertThat(plan.field("beds").orElseThrow().size().orElseThrow().max()).isEqualTo(8);
    assertThat(plan.field("coefficients").orElseThrow().size().orElseThrow().max()).isEqualTo(200);
  }

  /** The escapes of RFC 6901, section 3. */
  @Test
  void pointersEscapeTildeAndSlash() {
    assertThat(Pointer.child(Pointer.child("/a", 0), "m~n/o")).isEqualTo("/a/0/m~0n~1o");
  }

  @Test
  void anEchoIsCutBetweenCharacters() {
    String grin = "\ud83d\ude00";
    Fault fault = new Fault("contract.x", "", "x".repeat(79) + grin, "", "", Map.of());
    assertThat(fault.rejected()).isEqualTo("x".repeat(79) + "...");
  }

  /** Units such as {CFU}/dL stand in sentences as they are. */
  @Test
  void bracesInAValueAreNoPlaces() {
    assertThat(
            Sentences.text(
                "evidence.default-number",
                Params.of("field", "faecalColiforms", "value", 10, "unit", "{CFU}/dL")))
        .contains("10 {CFU}/dL");
  }
}
