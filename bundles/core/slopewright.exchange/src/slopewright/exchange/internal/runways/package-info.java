/** The forms in which open runway data come: tables of a database, and comma-separated values. */
package slopewright.exchange.internal.runways;
