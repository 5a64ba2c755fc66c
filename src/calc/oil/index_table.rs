//! Coefficients of the two reference oils of the viscosity index.
//!
//! # Source
//! ASTM D2270, appendix X2, table X2.1: quadratics fitted to its table 1 in fifteen ranges, to 70 mm²/s at 100 °C (as
//! quoted). Above 70 mm²/s: sections 5.1.2 and 6.1.2.

/// One range of the viscosity Y at 100 °C, mm²/s, with `L = a Y² + b Y + c` and `H = d Y² + e Y + f`, mm²/s at 40 °C.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Range {
    /// Greatest Y of the range; its least is where the range before ends.
    pub to: f64,
    /// a, b and c: the reference oil of index 0.
    pub l: [f64; 3],
    /// d, e and f: the reference oil of index 100.
    pub h: [f64; 3],
}

/// Least viscosity at 100 °C for which the index is defined, mm²/s (ASTM D2270, scope).
pub const LEAST: f64 = 2.0;

/// Every range from 2 mm²/s up, thinnest first; the last has no end.
pub static RANGES: [Range; 16] = [
    range(3.8, [1.146_73, 1.7576, -0.109], [0.841_55, 1.5521, -0.077]),
    range(4.4, [3.380_95, -15.4952, 33.196], [0.785_71, 1.7929, -0.183]),
    range(5.0, [2.5, -7.2143, 13.812], [0.821_43, 1.5679, 0.119]),
    range(6.4, [0.101, 16.635, -45.469], [0.049_85, 9.1613, -18.557]),
    range(7.0, [3.357_14, -23.5643, 78.466], [0.226_19, 7.7369, -16.656]),
    range(7.7, [0.011_91, 21.475, -72.870], [0.797_62, -0.7321, 14.610]),
    range(9.0, [0.418_58, 16.1558, -56.040], [0.057_94, 10.5156, -28.240]),
    range(12.0, [0.887_79, 7.5527, -16.600], [0.266_65, 6.7015, -10.810]),
    range(15.0, [0.767_20, 10.7972, -38.180], [0.200_73, 8.4658, -22.490]),
    range(18.0, [0.973_05, 5.3135, -2.200], [0.288_89, 5.9741, -4.930]),
    range(22.0, [0.972_56, 5.25, -0.980], [0.245_04, 7.416, -16.730]),
    range(28.0, [0.914_13, 7.4759, -21.820], [0.203_23, 9.1267, -34.230]),
    range(40.0, [0.870_31, 9.7157, -50.770], [0.184_11, 10.1015, -46.750]),
    range(55.0, [0.847_03, 12.6752, -133.310], [0.170_29, 11.4866, -80.620]),
    range(70.0, [0.859_21, 11.1009, -83.190], [0.171_30, 11.3680, -76.940]),
    range(f64::MAX, [0.8353, 14.67, -216.0], [0.1684, 11.85, -97.0]),
];

const fn range(to: f64, l: [f64; 3], h: [f64; 3]) -> Range {
    Range { to, l, h }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ranges_rise() {
        assert!(RANGES[0].to > LEAST && RANGES.windows(2).all(|pair| pair[0].to < pair[1].to));
    }
}
