/**
 * The verification table: check cases kept as data, each run through an operation and set beside the published value.
 *
 * <p>To add a topic: write a class with {@code static Map<String, Operation> all()}, add it as one line to
 * {@link org.strawblue.app.proof.Operations}, and put its cases into {@code cases/}.
 */
@NullMarked
package org.strawblue.app.proof;

import org.jspecify.annotations.NullMarked;
