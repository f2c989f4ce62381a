/** Circuits and their loads, for the electrician. */
package slopewright.exchange.circuit;
