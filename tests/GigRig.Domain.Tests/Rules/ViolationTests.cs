using System.Text.RegularExpressions;
using CsCheck;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.TestKit.Building;
using GigRig.TestKit.Generating;

namespace GigRig.Domain.Tests.Rules;

public sealed partial class ViolationTests
{
    [Fact]
    public void To_a_reader_of_inches_no_sentence_speaks_of_millimetres() =>
        (from problem in GenProblem.Small
         from rig in GenRig.For(problem)
         from changed in GenMutation.Of(problem, rig)
         select (problem, changed)).Sample((problem, rig) =>
            Assert.All(RuleBook.Check(problem, rig), violation =>
            {
                var (metric, inches) = (violation.Sentence.In(LengthUnit.Millimetres), violation.Sentence.In(LengthUnit.Inches));
                Assert.DoesNotMatch(Metric(), inches);
                Assert.DoesNotMatch(Imperial(), metric);
                Assert.Equal(Metric().IsMatch(metric), Imperial().IsMatch(inches));
            }), iter: 2000);

    /// <summary>460 mm are 18.11 in, 461 mm are 18.15 in (25.4 mm an inch, NIST SP 811, appendix B); with one decimal the first would be 18.1 and so would 459 mm.</summary>
    [Fact]
    public void One_millimetre_too_much_is_seen_in_inches_too()
    {
        var problem = A.Draft(A.Board().Clearing(over: 459)).With(A.Device("tower").Sized(70, 120, 460)).Problem();

        Assert.Equal("tower is 18.11 in high; the lid leaves 18.07 in.", Judge.Fails(RuleIds.Lid, problem, A.Rig().Placing("tower", 0, 0)).Sentence.In(LengthUnit.Inches));
    }

    [GeneratedRegex(@"\d mm")]
    private static partial Regex Metric();

    [GeneratedRegex(@"\d in(?![a-z])")]
    private static partial Regex Imperial();
}
