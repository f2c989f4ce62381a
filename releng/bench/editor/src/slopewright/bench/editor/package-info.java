/** Measures the plan editor in the product's own window. */
package slopewright.bench.editor;
