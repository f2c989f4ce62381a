/** Runways from open data in a file that the user names, looked up by the code of an airport. */
package slopewright.exchange.runways;
