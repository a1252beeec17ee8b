package org.marshlight.feed;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the feed package adds to the books. */
public final class Feeds implements EvidenceShelf {

  @Override
  public List<Class<?>> formulas() {
    return List.of(Stoichiometry.class);
  }

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(FeedAnalysis.class, PersonalStream.class, LoadModel.FlushWater.class);
  }

  @Override
  public List<String> catalogues() {
    return List.of("feeds", "personal-streams");
  }
}
