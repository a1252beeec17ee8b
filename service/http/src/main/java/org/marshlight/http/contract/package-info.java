/** The OpenAPI document: what the routes say of themselves, completed from the records' shapes. */
package org.marshlight.http.contract;
