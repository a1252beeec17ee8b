/**
 * What goes in: people, kitchen, animals and garden; loads of water, COD, N, P and K; and the
 * matter and accounts in which every later stage keeps its books.
 */
package org.marshlight.feed;
