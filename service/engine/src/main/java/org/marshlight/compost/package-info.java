/** The heap: mix, decay, heat and hygiene, nutrients returned. */
package org.marshlight.compost;
