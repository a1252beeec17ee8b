/** Costs, prices and discounting: pure finance, no physics. */
package org.marshlight.economy;
