package org.marshlight.loop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.marshlight.feed.Account;
import org.marshlight.feed.Party;

/**
 * The books of all processes laid side by side. What a process receives from, or gives to, a party
 * that keeps no books crosses the border of the loop; nothing is assigned to close a balance.
 */
final class Ledger {

  private static final String UNIT = "kg";
  private static final double NOTHING_KG = 1e-15;

  private final List<Account> accounts;
  private final Set<String> processes;
  private final HumanOrigin humanOrigin;

  /**
   * Opens the ledger.
   *
   * @param accounts books of every process
   * @param ofHumanOrigin processes that a plan has brought matter of human origin to from outside
   */
  Ledger(List<Account> accounts, Set<String> ofHumanOrigin) {
    this.accounts = accounts;
    this.humanOrigin = HumanOrigin.of(accounts, ofHumanOrigin);
    this.processes =
        accounts.stream().map(Account::process).collect(Collectors.toUnmodifiableSet());
  }

  /** What crossed the border of the whole loop, for each quantity. */
  List<Balance> balances() {
    List<Balance> balances = new ArrayList<>();
    for (Conserved quantity : Conserved.values()) {
      double in = 0;
      double out = 0;
      double stored = 0;
      for (Account account : accounts) {
        in += crossing(account.received(), quantity);
        out += crossing(account.gave(), quantity);
        stored += quantity.of(account.kept());
      }
      balances.add(Balance.of(quantity.wireName(), "loop", UNIT, in, out, stored));
    }
    return balances;
  }

  private double crossing(List<Account.Entry> entries, Conserved quantity) {
    double sum = 0;
    for (Account.Entry entry : entries) {
      if (!processes.contains(entry.party())) {
        sum += quantity.of(entry.matter());
      }
    }
    return sum;
  }

  /** Every flow: what each process gave, and what it received from outside. */
  List<Flow> flows() {
    List<Flow> flows = new ArrayList<>();
    for (Conserved quantity : Conserved.values()) {
      for (Account account : accounts) {
        for (Account.Entry entry : account.received()) {
          if (!processes.contains(entry.party())) {
            add(flows, quantity, entry.party(), account.process(), entry);
          }
        }
        for (Account.Entry entry : account.gave()) {
          add(flows, quantity, account.process(), entry.party(), entry);
        }
      }
    }
    return List.copyOf(flows);
  }

  private void add(
      List<Flow> flows, Conserved quantity, String from, String to, Account.Entry entry) {
    double kg = quantity.of(entry.matter());
    if (Math.abs(kg) > NOTHING_KG) {
      flows.add(flow(quantity, from, to, kg));
    }
  }

  private Flow flow(Conserved quantity, String from, String to, double kg) {
    boolean human = humanOrigin.in(from, to, processes.contains(from));
    return new Flow(quantity.wireName(), from, to, kg, UNIT, human);
  }

  /** How much of what is brought returns to land, and where the rest goes. */
  List<Closure> closure() {
    List<Closure> closures = new ArrayList<>();
    for (Conserved quantity :
        List.of(Conserved.CARBON, Conserved.NITROGEN, Conserved.PHOSPHORUS, Conserved.POTASSIUM)) {
      double brought = 0;
      double returned = 0;
      Map<String, Double> losses = new TreeMap<>();
      for (Account account : accounts) {
        for (Account.Entry entry : account.received()) {
          brought += BROUGHT.contains(entry.party()) ? quantity.of(entry.matter()) : 0;
        }
        for (Account.Entry entry : account.gave()) {
          double kg = quantity.of(entry.matter());
          if (entry.party().equals(Party.LAND)) {
            returned += kg;
          } else if (!processes.contains(entry.party())) {
            losses.merge(account.process() + "\n" + entry.party(), kg, Double::sum);
          }
        }
        losses.merge(account.process() + "\n" + KEPT, quantity.of(account.kept()), Double::sum);
      }
      closures.add(
          new Closure(
              quantity.wireName(),
              brought > 0 ? Math.max(0, returned / brought) : null,
              ordered(quantity, losses)));
    }
    return List.copyOf(closures);
  }

  private static final Set<String> BROUGHT = Set.of(Party.PEOPLE, Party.FEEDS, Party.PURCHASES);

  /** Name under which a closure lists what a process holds back. */
  private static final String KEPT = "kept";

  private List<Flow> ordered(Conserved quantity, Map<String, Double> losses) {
    return losses.entrySet().stream()
        .filter(loss -> loss.getValue() > NOTHING_KG)
        .sorted(
            Comparator.<Map.Entry<String, Double>>comparingDouble(loss -> -loss.getValue())
                .thenComparing(Map.Entry::getKey))
        .map(
            loss -> {
              String[] ends = loss.getKey().split("\n");
              return flow(quantity, ends[0], ends[1], loss.getValue());
            })
        .toList();
  }
}
