/**
 * Charts as plain SVG: drawn on the server, so that the page, the report and the print are one, and
 * none needs a script. Lines differ by dash and mark and areas by hatching, so that they can be
 * told apart in black and white.
 */
package org.marshlight.http.drawing;
