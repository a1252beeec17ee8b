package org.marshlight.json;

import java.util.List;
import org.marshlight.contract.Fault;

/**
 * What could be read of a document.
 *
 * @param record the record, in which whatever could not be read is absent; null if the document is
 *     no object at all
 * @param faults why something could not be read, in the order of the document; empty if all could
 */
public record PartlyRead<R extends Record>(R record, List<Fault> faults) {

  public PartlyRead {
    faults = List.copyOf(faults);
  }
}
