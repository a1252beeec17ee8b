package org.marshlight.climate;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the climate package adds to the books. */
public final class Climate implements EvidenceShelf {

  @Override
  public List<String> catalogues() {
    return List.of("soils");
  }
}
