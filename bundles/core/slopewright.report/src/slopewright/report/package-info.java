/** Documents assembled from outcomes, drawings and templates, with PDF and PNG painters. */
package slopewright.report;
