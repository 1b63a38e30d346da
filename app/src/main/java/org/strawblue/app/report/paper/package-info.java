/** The card on paper: blocks measured, set one below the other, broken over pages, written as PDF. */
@NullMarked
package org.strawblue.app.report.paper;

import org.jspecify.annotations.NullMarked;
