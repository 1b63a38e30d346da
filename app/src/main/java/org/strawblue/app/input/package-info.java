/**
 * Reads what people write: quantities in any trade form, job files, spring drawers, tables. Nothing here throws at bad
 * input: every fault becomes a {@link org.strawblue.app.input.Problem} with its place and remedy.
 */
@NullMarked
package org.strawblue.app.input;

import org.jspecify.annotations.NullMarked;
