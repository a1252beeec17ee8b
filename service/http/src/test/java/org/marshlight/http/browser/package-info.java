/** The page as a person meets it: in a real browser, with keyboard and eyes. */
package org.marshlight.http.browser;
