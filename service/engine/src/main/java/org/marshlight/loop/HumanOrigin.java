package org.marshlight.loop;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.marshlight.feed.Account;
import org.marshlight.feed.Party;

/**
 * Where human waste, and what grew on it, goes: from the people through whatever a process that
 * received it gives on, until it leaves as gas, vapour or distillate, which hold no germs and no
 * worms. No heat or storage takes the mark away.
 *
 * @param held processes that hold it
 * @param received those of them that hold it because another process, or people, gave it to them
 */
record HumanOrigin(Set<String> held, Set<String> received) {

  /** Receivers of gas, vapour, distillate, and of what is no matter to handle. */
  private static final Set<String> CLEAN =
      Set.of(
          Party.AIR,
          Party.OXYGEN,
          Party.REACTION,
          Party.GAS_STORE,
          Party.BURNER,
          Party.FLARE,
          Party.FUEL_TANK);

  /**
   * Follows it through the books.
   *
   * @param accounts books of every process
   * @param stated processes that a plan has brought it to from outside, beside that of people
   */
  static HumanOrigin of(List<Account> accounts, Set<String> stated) {
    Set<String> received = new HashSet<>();
    for (Account account : accounts) {
      if (account.received().stream().anyMatch(entry -> entry.party().equals(Party.PEOPLE))) {
        received.add(account.process());
      }
    }
    Set<String> held = new HashSet<>(stated);
    held.addAll(received);
    boolean grows = true;
    while (grows) {
      grows = false;
      for (Account account : accounts) {
        if (held.contains(account.process())) {
          for (Account.Entry entry : account.gave()) {
            grows |= !CLEAN.contains(entry.party()) && received.add(entry.party());
          }
        }
      }
      held.addAll(received);
    }
    return new HumanOrigin(Set.copyOf(held), Set.copyOf(received));
  }

  /**
   * Whether what flows between two parties holds it.
   *
   * @param from who gives
   * @param to who receives
   * @param fromProcess whether the giver is a process with books of its own
   */
  boolean in(String from, String to, boolean fromProcess) {
    if (CLEAN.contains(to)) {
      return false;
    }
    if (fromProcess || from.equals(Party.PEOPLE)) {
      return from.equals(Party.PEOPLE) || held.contains(from);
    }
    boolean onlyFromOutside = held.contains(to) && !received.contains(to);
    return onlyFromOutside
        && (from.equals(GivenStreams.PARTY)
            || from.equals(Party.PURCHASES) && to.equals(Party.HEAP));
  }
}
