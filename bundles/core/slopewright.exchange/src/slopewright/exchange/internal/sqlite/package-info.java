/** Writes database files of SQLite 3. */
package slopewright.exchange.internal.sqlite;
