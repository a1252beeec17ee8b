/** Cautions, and the rules by which a plan and its figures raise them. */
package org.marshlight.safety;
