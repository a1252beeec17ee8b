package org.marshlight.http.report;

import java.util.List;

/**
 * A part of the report under its own question.
 *
 * @param id anchor, by which the page finds it too
 * @param question heading
 * @param blocks what answers it
 * @param more what the page shows only when it is asked for
 */
public record Part(String id, String question, List<Block> blocks, List<Block> more) {

  /** A part of which everything is shown at once. */
  static Part of(String id, String question, List<Block> blocks) {
    return of(id, question, blocks, List.of());
  }

  /** Without the blocks that have nothing to show. */
  static Part of(String id, String question, List<Block> blocks, List<Block> more) {
    return new Part(id, question, filled(blocks), filled(more));
  }

  /** Whether it has nothing to show. */
  public boolean empty() {
    return blocks.isEmpty() && more.isEmpty();
  }

  private static List<Block> filled(List<Block> blocks) {
    return blocks.stream().filter(block -> !block.empty()).toList();
  }
}
