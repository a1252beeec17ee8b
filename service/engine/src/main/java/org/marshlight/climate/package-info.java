/**
 * The site and its weather: monthly normals, the year made from them, sun, tilted radiation, sky,
 * ground temperature and reference evapotranspiration.
 */
package org.marshlight.climate;
