/** The tank: cover, heat balance, methane kinetics, stability, gas store and uses, sludge. */
package org.marshlight.digester;
