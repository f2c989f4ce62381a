/** The wizard that leads from a site to a first layout in three steps, and the templates that it starts from. */
package slopewright.rcp.internal.site;
