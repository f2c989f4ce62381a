/** What stands on the ground and over it, as features on a map: GeoJSON and KML. */
package slopewright.exchange.map;
