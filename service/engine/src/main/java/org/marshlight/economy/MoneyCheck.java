package org.marshlight.economy;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Pointer;
import org.marshlight.evidence.CatalogueItem;
import org.marshlight.evidence.Catalogues;

/** Rules for costs and prices that go beyond the bounds of single fields. */
public final class MoneyCheck {

  /** Kind of those fuels that a plan gives itself, which nothing is bought of. */
  private static final String OWN = "own";

  private MoneyCheck() {}

  /**
   * Every fault of a money section whose fields are legal one by one.
   *
   * @param pointer where the section stands
   */
  public static List<Fault> faults(MoneyDesign money, String pointer) {
    List<Fault> faults = new ArrayList<>();
    if (money.currency() != null && !Currencies.codes().contains(money.currency())) {
      faults.add(
          Fault.unknown(
              "economy.unknown-currency",
              Pointer.child(pointer, "currency"),
              money.currency(),
              money.currency(),
              Currencies.codes(),
              String.join(", ", Currencies.codes())));
    }
    if (money.displacedFuel() != null && ofOwn(money.displacedFuel())) {
      faults.add(
          Fault.of(
              "economy.own-fuel",
              Pointer.child(pointer, "displacedFuel"),
              money.displacedFuel(),
              String.join(", ", bought()),
              "fuel",
              money.displacedFuel()));
    }
    return faults;
  }

  private static boolean ofOwn(String fuel) {
    return Catalogues.standard()
        .find("fuels", fuel)
        .map(item -> item.kind().equals(OWN))
        .orElse(false);
  }

  private static List<String> bought() {
    return Catalogues.standard().items("fuels").stream()
        .filter(item -> !item.kind().equals(OWN))
        .map(CatalogueItem::id)
        .toList();
  }
}
