/**
 * The human body as geometry: proportions, joints and their limits, the skeleton placed by forward kinematics, and the
 * smooth solids around it. Lengths are fractions of stature, angles are clinical degrees. Knows no contacts, props,
 * files or drawings.
 */
@NullMarked
package org.drillsheaf.figure.body;

import org.jspecify.annotations.NullMarked;
