/** The beds: removal, hydraulics, water balance, soil absorption as the fallback. */
package org.marshlight.wetland;
