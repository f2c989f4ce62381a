/** The guide of the product: pages that are made of the catalogues, kept in the tree and shipped with the window. */
package slopewright.headless.guide;
