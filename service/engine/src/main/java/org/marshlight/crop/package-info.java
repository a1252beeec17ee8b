/** Plants of the beds: growth, storage organs, starch and harvest. */
package org.marshlight.crop;
