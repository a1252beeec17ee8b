/** The whole plan: its chain of stages, flows and balances. Knows no verdict. */
package org.marshlight.loop;
