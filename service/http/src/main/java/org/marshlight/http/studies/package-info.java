/** Studies: their routes, where they run, and the forms in which they are told. */
package org.marshlight.http.studies;
