/**
 * Files that go to and come from other programs: catalogue archives, sheets, calendars, health records. Knows no paper and no
 * database.
 */
@NullMarked
package org.drillsheaf.exchange;

import org.jspecify.annotations.NullMarked;
