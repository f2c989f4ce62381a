/** Tables for people: setting out, circuits and loads, data to publish, as CSV and as spreadsheets. */
package slopewright.exchange.sheet;
