/**
 * The vocabulary of requests and answers: what a number means, its unit and bounds, the names used
 * on the wire, and the coded sentences (notices, assumptions, faults) that go with figures.
 *
 * <p>Uses no other package of the engine.
 */
package org.marshlight.contract;
