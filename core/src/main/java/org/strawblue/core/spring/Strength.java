package org.strawblue.core.spring;

import org.strawblue.core.source.Basis;

/** @param least tensile strength that the standard promises [Pa] */
public record Strength(double least, Basis basis) {}
