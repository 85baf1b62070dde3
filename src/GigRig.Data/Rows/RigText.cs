using GigRig.Domain.Documents;
using GigRig.Domain.Rigs;

namespace GigRig.Data.Rows;

/// <summary>A rig and its problem as text in the database.</summary>
internal static class RigText
{
    public static RigProblem ReadProblem(string json, string title) => RigProblemJson.Read(json) switch
    {
        ProblemCheck.Accepted accepted => accepted.Problem,
        ProblemCheck.Refused refused => throw new UnreadableRigException(title, refused.Complaints[0]),
        _ => throw new InvalidOperationException("A third kind of answer."),
    };

    public static Rig ReadRig(string json, string title) => RigJson.Read(json) switch
    {
        RigCheck.Accepted accepted => accepted.Rig,
        RigCheck.Refused refused => throw new UnreadableRigException(title, refused.Complaints[0]),
        _ => throw new InvalidOperationException("A third kind of answer."),
    };
}
