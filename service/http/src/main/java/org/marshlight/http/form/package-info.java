/**
 * The form in which a person describes a plan. Its fields, their bounds, units, defaults and help
 * come from the plan's own records and the coefficient book; only names, hints and their order are
 * said here.
 */
package org.marshlight.http.form;
