package org.marshlight.safety;

import org.marshlight.evidence.EvidenceShelf;

/** What the safety package adds to the books: the sources of its figures. */
public final class Safety implements EvidenceShelf {}
