package org.marshlight.evidence;

import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;

/** Every shelf of the engine, in the order of their package names. */
final class EvidenceShelves {

  private EvidenceShelves() {}

  static List<EvidenceShelf> all() {
    return ServiceLoader.load(EvidenceShelf.class, EvidenceShelf.class.getClassLoader()).stream()
        .map(ServiceLoader.Provider::get)
        .sorted(Comparator.comparing(shelf -> shelf.getClass().getName()))
        .toList();
  }
}
