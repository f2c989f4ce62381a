/** A new site: what is asked of whoever begins one, what is assumed until then, and the project that is made of it. */
package slopewright.evaluation.site;
