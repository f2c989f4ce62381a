/** Many runway ends against the same points, each as if it were checked alone; plain classes that run on any machine of a cluster. */
package slopewright.evaluation.sweep;
