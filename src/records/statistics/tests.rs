//! Checked against published worked examples and a general statistics library.

use approx::assert_relative_eq;
use drivecourse_machine::chance::Stream;
use statrs::distribution::{ChiSquared, ContinuousCDF, Normal};
use statrs::statistics::Statistics;

use super::*;

/// Ten students' answers to ten items: K. Wuensch (East Carolina University), *KR20*, teaching notes on the
/// Kuder-Richardson formula; the notes print the totals, p, p q and the variance 5.84 of the totals.
const CLASS: [&str; 10] = [
    "1111110110",
    "1011011101",
    "1111011001",
    "0010001000",
    "0000010010",
    "1110111111",
    "1101110111",
    "1111111101",
    "0101111101",
    "1101101110",
];

fn class() -> Vec<Vec<f64>> {
    CLASS.iter().map(|row| row.chars().map(|c| f64::from(c == '1')).collect()).collect()
}

fn columns(people: &[Vec<f64>]) -> Vec<Vec<f64>> {
    (0..people[0].len()).map(|item| people.iter().map(|scores| scores[item]).collect()).collect()
}

#[test]
fn kr20_of_the_published_class() {
    let people = class();
    let totals: Vec<f64> = people.iter().map(|scores| scores.iter().sum()).collect();
    assert_eq!(totals, [8.0, 7.0, 7.0, 2.0, 2.0, 9.0, 8.0, 9.0, 7.0, 7.0]);
    let p: Vec<f64> = columns(&people).iter().map(|item| mean(item.iter().copied())).collect();
    assert_eq!(p, [0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6]);
    assert_relative_eq!(variance(&totals), 5.84, max_relative = 1e-12);
    let pq: f64 = columns(&people).iter().map(|item| variance(item)).sum();
    assert_relative_eq!(pq, 2.18, max_relative = 1e-12);
    // Worked by hand from the printed figures: 10/9 (1 - 2.18/5.84).
    assert_relative_eq!(alpha(&people).unwrap(), 10.0 / 9.0 * (1.0 - 2.18 / 5.84), max_relative = 1e-12);
}

/// Five people, three scales; the totals are printed, alpha follows: 3/2 (1 - 2.2/4.3).
#[test]
fn alpha_does_not_hang_on_the_divisor_when_it_is_one_for_all() {
    let people: Vec<Vec<f64>> =
        [[3, 4, 3], [2, 3, 4], [4, 4, 5], [3, 2, 3], [4, 4, 4]].map(|row| row.map(f64::from).to_vec()).to_vec();
    assert_relative_eq!(alpha(&people).unwrap(), 1.5 * (1.0 - 2.2 / 4.3), max_relative = 1e-12);
}

/// Ten people, five items: Denis, D. J., *Applied Univariate, Bivariate, and Multivariate Statistics* (Wiley), section on
/// Cronbach's alpha. Printed: alpha 0.633, standard deviations, and 0.712 for the corrected correlation of item 1.
#[test]
fn alpha_and_corrected_correlation_of_a_textbook() {
    let people: Vec<Vec<f64>> = [
        [10, 12, 15, 11, 12],
        [12, 18, 12, 12, 1],
        [8, 16, 14, 14, 4],
        [6, 8, 16, 8, 6],
        [4, 7, 8, 7, 5],
        [6, 6, 3, 7, 3],
        [3, 4, 6, 5, 8],
        [7, 3, 7, 9, 9],
        [8, 9, 4, 10, 10],
        [9, 5, 6, 11, 12],
    ]
    .map(|row| row.map(f64::from).to_vec())
    .to_vec();
    assert!((alpha(&people).unwrap() - 0.633).abs() < 0.0005);
    assert!((corrected(&people)[0].unwrap() - 0.712).abs() < 0.0005);
    for (item, printed) in columns(&people).iter().zip([2.71006, 5.05085, 4.74810, 2.71621, 3.80058]) {
        let sample = (variance(item) * 10.0 / 9.0).sqrt();
        assert!((sample - printed).abs() < 0.000_006, "{sample} {printed}");
        assert_relative_eq!(variance(item), item.population_variance(), max_relative = 1e-12);
    }
    let all = columns(&people);
    let pairs = |a: usize, b: usize| all[a].iter().copied().zip(all[b].iter().copied()).collect::<Vec<_>>();
    for (a, b, printed) in [(0, 1, 0.679), (0, 2, 0.351), (0, 3, 0.827), (1, 4, -0.463), (3, 4, -0.011)] {
        assert!((correlation(&pairs(a, b)).unwrap() - printed).abs() < 0.0005);
        let oracle = (&all[a]).covariance(&all[b]) / ((&all[a]).std_dev() * (&all[b]).std_dev());
        assert_relative_eq!(correlation(&pairs(a, b)).unwrap(), oracle, max_relative = 1e-12);
    }
}

/// An item that everyone answers like the rest has correlation 1 with the rest; one that all answer alike has none.
#[test]
fn corrected_correlation_leaves_the_item_out() {
    let people = class();
    for (item, found) in corrected(&people).into_iter().enumerate() {
        // The textbook form of the point-biserial: (mean of those right - mean of those wrong) / s × √(p q).
        let rest: Vec<f64> = people.iter().map(|scores| scores.iter().sum::<f64>() - scores[item]).collect();
        let of = |right: f64| {
            let chosen = people.iter().zip(&rest).filter(|(scores, _)| scores[item] == right).map(|(_, rest)| *rest);
            chosen.collect::<Vec<_>>()
        };
        let (right, wrong) = (of(1.0), of(0.0));
        let p = right.len() as f64 / 10.0;
        let form = ((&right).mean() - (&wrong).mean()) / rest.population_std_dev() * (p * (1.0 - p)).sqrt();
        assert!((found.unwrap() - form).abs() < 1e-12, "item {item}");
    }
    let same: Vec<Vec<f64>> = (0..5).map(|x| vec![f64::from(x), f64::from(x), 1.0]).collect();
    let found = corrected(&same);
    assert_relative_eq!(found[0].unwrap(), 1.0, max_relative = 1e-12);
    assert_eq!(found[2], None);
}

/// Newcombe, R. G. (1998), *Two-sided confidence intervals for the single proportion*, Statistics in Medicine 17,
/// table I: method 3 (Wilson) for 81/263, 15/148, 0/20 and 1/29.
#[test]
fn intervals_of_the_published_table() {
    for (hits, of, low, high) in
        [(81, 263, 0.2553, 0.3662), (15, 148, 0.0624, 0.1605), (0, 20, 0.0, 0.1611), (1, 29, 0.0061, 0.1718)]
    {
        let (found_low, found_high) = interval(hits, of).unwrap();
        assert!((found_low - low).abs() < 0.000_05 && (found_high - high).abs() < 0.000_05, "{hits}/{of}");
    }
    assert_relative_eq!(Z95, Normal::new(0.0, 1.0).unwrap().inverse_cdf(0.975), max_relative = 1e-9);
    assert_eq!(interval(0, 0), None);
}

/// Percentage points of chi-square at 5 % and 1 % in any table (Abramowitz and Stegun 1964, table 26.8), and the library.
#[test]
fn the_probability_of_chi_square() {
    for (freedom, square, probability) in
        [(1.0, 3.841, 0.05), (2.0, 5.991, 0.05), (5.0, 11.070, 0.05), (10.0, 23.209, 0.01), (30.0, 50.892, 0.01)]
    {
        // The printed point is rounded to three places.
        let at = |square: f64| upper_gamma(freedom / 2.0, square / 2.0);
        assert!(at(square + 0.000_5) <= probability && probability <= at(square - 0.000_5), "{freedom}");
    }
    for freedom in 1..40 {
        let oracle = ChiSquared::new(f64::from(freedom)).unwrap();
        for step in 1..200 {
            let x = f64::from(step) * 0.5;
            let found = upper_gamma(f64::from(freedom) / 2.0, x / 2.0);
            assert!((found - (1.0 - oracle.cdf(x))).abs() < 1e-9, "{freedom} {x} {found}");
        }
    }
}

#[test]
fn groups_alike_and_not() {
    // By hand: 10 of 20 and 10 of 20 are alike; 15 of 20 and 5 of 20 give 4 × 25/10 = 10.
    assert_relative_eq!(alike(&[(10, 20), (10, 20)]).unwrap().square, 0.0);
    let differ = alike(&[(15, 20), (5, 20)]).unwrap();
    assert_relative_eq!(differ.square, 10.0, max_relative = 1e-12);
    assert!(differ.freedom == 1 && differ.probability < 0.01 && !differ.rough);
    assert!(alike(&[(1, 3), (2, 3)]).unwrap().rough);
    for nothing in [&[][..], &[(1, 2)], &[(2, 2), (3, 3)], &[(0, 2), (0, 0)]] {
        assert_eq!(alike(nothing), None);
    }
}

/// Ranks with ties, and a rank correlation worked from its definition: 1 - 6 Σ d² / (n (n² - 1)) where there are no ties.
#[test]
fn ranks_and_their_correlation() {
    assert_eq!(ranks(&[3.0, 1.0, 3.0, 2.0]), [3.5, 1.0, 3.5, 2.0]);
    let mut stream = Stream::new(5, "ranks");
    let (a, b): (Vec<f64>, Vec<f64>) = (0..50).map(|_| (stream.unit(), stream.unit())).unzip();
    let squares: f64 = ranks(&a).iter().zip(ranks(&b)).map(|(x, y)| (x - y) * (x - y)).sum();
    let form = 1.0 - 6.0 * squares / (50.0 * (2500.0 - 1.0));
    assert_relative_eq!(rank_correlation(&a, &b).unwrap(), form, max_relative = 1e-9);
    assert_relative_eq!(rank_correlation(&a, &a.iter().map(|x| x * x).collect::<Vec<_>>()).unwrap(), 1.0);
}

#[test]
fn nothing_to_say_is_not_a_number_made_up() {
    assert_eq!(alpha(&[]), None);
    assert_eq!(alpha(&[vec![1.0, 0.0]]), None);
    assert_eq!(alpha(&[vec![1.0], vec![0.0]]), None);
    assert_eq!(alpha(&[vec![1.0, 0.0], vec![0.0, 1.0]]), None, "all totals are alike");
    assert!(corrected(&[]).is_empty());
}
