/** Survey files of other programs, brought into a project: CSV, GeoJSON, KML and DXF. */
package slopewright.exchange.survey;
