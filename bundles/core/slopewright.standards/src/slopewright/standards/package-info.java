/** Published tables as data, with strict typed readers, citations, editions and rule sets. */
package slopewright.standards;
