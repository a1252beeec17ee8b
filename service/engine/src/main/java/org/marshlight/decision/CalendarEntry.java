package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Params;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Sentences;

/** Work or a watch-point of the year. */
@Meaning("Work or a watch-point of the year.")
public record CalendarEntry(
    @NotNull @Meaning("Stable name.") @Size(max = 60) String code,
    @Size(max = 12)
        @Quantity(unit = "1", min = 1, max = 12, meaning = "Months in which it falls, 1 = January.")
        List<Integer> months,
    @NotNull @Meaning("What is to be done or watched.") @Size(max = 500) String text,
    @Meaning("The numbers and names in the text.") Map<String, Object> params) {

  static CalendarEntry of(String code, List<Integer> months, Object... params) {
    Map<String, Object> named = Params.of(params);
    return new CalendarEntry(code, months, Sentences.text(code, named), named);
  }
}
