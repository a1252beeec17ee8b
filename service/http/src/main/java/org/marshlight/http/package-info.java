/**
 * The service: how requests reach the engine, and how answers, problems and cautions leave it. Each
 * package has one job; none holds physics.
 */
package org.marshlight.http;
