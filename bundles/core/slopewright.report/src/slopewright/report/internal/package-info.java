/** How documents are put together and painted. */
package slopewright.report.internal;
