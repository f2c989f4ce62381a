/** Hand-written helpers around the generated model: ids, look-up and names of elements. */
package slopewright.model.util;
