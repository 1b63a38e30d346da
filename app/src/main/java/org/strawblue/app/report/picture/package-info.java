/** The card's pictures as workshop drawings, kept apart from how they reach a screen or paper. */
@NullMarked
package org.strawblue.app.report.picture;

import org.jspecify.annotations.NullMarked;
