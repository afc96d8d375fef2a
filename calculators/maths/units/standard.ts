/** Standard gravity, m/s². Exact: NIST Special Publication 811 (2008), Appendix B.8. */
export const STANDARD_GRAVITY = 9.80665;

/** The standard atmosphere, kPa: the pressure at sea level of ISO 2533:1975. Exact, as above. */
export const STANDARD_ATMOSPHERE = 101.325;
