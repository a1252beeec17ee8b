/**
 * How answers are said to people: numbers and units in the system that they read, texts in the
 * language that they read as far as a translation has it.
 */
package org.marshlight.http.words;
