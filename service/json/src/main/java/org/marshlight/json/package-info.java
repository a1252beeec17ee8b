/**
 * Strict reading of requests into the engine's records, canonical hashes, and the one way in which
 * answers are written.
 */
package org.marshlight.json;
