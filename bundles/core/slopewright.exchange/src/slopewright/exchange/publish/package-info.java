/** The data of each aid that an aerodrome publishes. */
package slopewright.exchange.publish;
