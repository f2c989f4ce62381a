/** What the readers and writers share. */
package slopewright.exchange.internal;
