package org.marshlight.evidence;

/** The evidence package's own shelf: sources that belong to no stage. */
public final class Evidence implements EvidenceShelf {}
