/** Tables for people, and the files they are written to: comma-separated values and workbooks. */
package slopewright.exchange.sheet;
