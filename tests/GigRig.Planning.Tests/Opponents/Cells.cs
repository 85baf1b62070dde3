namespace GigRig.Planning.Tests.Opponents;

/// <summary>A set of square millimetres.</summary>
internal sealed class Cells(int count)
{
    private readonly ulong[] words = new ulong[(count + 63) / 64];

    public void Add(int cell) => words[cell / 64] |= 1UL << (cell % 64);

    public bool Meets(Cells other)
    {
        for (var i = 0; i < words.Length; i++)
            if ((words[i] & other.words[i]) != 0)
                return true;
        return false;
    }
}
