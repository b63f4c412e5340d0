/**
 * The body and its picture: proportions, joints, poses, contacts, statics, camera and drawing. Knows no drill and no
 * client, touches no window toolkit, and gives the same drawing for the same pose.
 */
@NullMarked
package org.drillsheaf.figure;

import org.jspecify.annotations.NullMarked;
