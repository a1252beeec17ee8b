/** Requests made at random from fixed seeds, and what must hold of every answer to them. */
package org.marshlight.http.fuzz;
