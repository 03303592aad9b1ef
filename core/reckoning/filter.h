#pragma once

#include "core/reckoning/crew.h"

#include <cstdint>
#include <functional>
#include <span>
#include <vector>

/// A particle filter that knows no worms: weights, resampling and the jitter of parameters over plain arrays.
/// Gordon, Salmond & Smith 1993; Liu & West 2001 (kernel from memory); tempering after Neal 2001 (from memory).
namespace tierloam::reckoning {

struct ArchiveAccess; // kept_members.cpp

/// Log-weights of the members; never raw weights, which underflow after a few observations.
class LogWeights {
public:
    explicit LogWeights(std::size_t members) : log_(members, 0.0) {}
    LogWeights() = default;

    std::size_t size() const { return log_.size(); }
    bool equal() const { return equal_; }
    std::span<const double> log() const { return log_; }
    /// Adds `exponent` times a log-likelihood of each member; −∞ rules a member out.
    void add(std::span<const double> logLikelihood, double exponent = 1.0);
    void reset();
    void restore(std::vector<double> log);
    /// Summing to 1; all equal when every member is ruled out.
    std::vector<double> normalised() const;
    /// 1/Σw², between 1 and the number of members; 0 when every member is ruled out.
    double effectiveSize() const;
    /// The same after `exponent` times this log-likelihood.
    double effectiveSizeWith(std::span<const double> logLikelihood, double exponent) const;

private:
    friend struct ArchiveAccess;
    std::vector<double> log_;
    bool equal_ = true;
};

/// Systematic resampling: member i of the next generation descends from ancestors[i]. `u` in (0, 1). Pure.
/// Members that keep a place of their own are not moved: an ancestor with offspring has one of them in its own place.
std::vector<int> systematic(std::span<const double> weights, double u);

/// Liu–West kernel: z ← mean + a·(z − mean) + √(1 − a²)·L·n with L the Cholesky factor of the weighted covariance before resampling, so
/// that mean and covariance stay. z[r·members + i] of `rows` rows, already resampled; `weights` and `before` are those before resampling.
/// `normals(r, out)` puts row r's standard normals into out [members]. Rows and members are shared out to the crew; the sums are those of one hand.
void liuWest(std::span<double> z, std::span<const double> before, std::span<const double> weights, std::size_t rows, double a,
             const std::function<void(std::size_t row, std::span<double> out)>& normals, Crew& crew);

/// Liu & West keep 0.98 where parameters alone are moved. Here the state is moved too, and 512 members in some forty directions need more:
/// with 0.98 they are soon the offspring of a handful, and bands of 90 % hold the truth in half of the calibration's households.
inline constexpr double liuWestKeeps = 0.9;

/// Part of an observation taken as the ensemble Kalman filter takes it, before the rest weighs the members (a bridge between the two: Frei &
/// Künsch 2013, from memory): every row of every member moves by its regression on what the member expects to be read,
///     z ← z + t·cov(z, h)/(var h + R) · (y + √R·n − h)
/// h [members] what each expects, y what was read, both on a scale where the noise has one variance R. t is what is left of a row's squared correlation
/// when that which so many members show by chance is taken off. A value beyond `surprising` sd of what is expected counts as if it lay there.
/// n: `normals` [members]. The number of members is a multiple of 4. Rows are shared out to the crew.
void moveTowards(std::span<double> z, std::span<const double> weights, std::size_t rows, std::span<const double> expected, double read, double noiseVariance,
                 std::span<const double> normals, Crew& crew);
inline constexpr double surprising = 3.0;

/// The greatest exponent in (0, 1] under which the observation leaves at least `wanted` effective members.
double temperedExponent(const LogWeights& weights, std::span<const double> logLikelihood, double wanted);

/// One observation: what it did to the weights.
struct Update {
    double effectiveSize = 0;  ///< after it as it stands, without tempering and before resampling
    double exponent = 1;       ///< below 1: fewer than 10 effective members would have been left, and it was weighed that much less
    bool resampled = false;
};
/// Weighs, tempers when no member explains the observation, and resamples when the effective size falls below half. `u` in (0, 1) is
/// for the resampling; `inherit` makes members into copies of their ancestors and may jitter them by the weights from before.
Update update(LogWeights& weights, std::span<const double> logLikelihood, double u,
              const std::function<void(std::span<const int> ancestors, std::span<const double> weightsBefore)>& inherit);

}
