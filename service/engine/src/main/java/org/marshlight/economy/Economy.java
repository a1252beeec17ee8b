package org.marshlight.economy;

import org.marshlight.evidence.EvidenceShelf;

/** What the economy package adds to the books: the defaults of its designs. */
public final class Economy implements EvidenceShelf {}
