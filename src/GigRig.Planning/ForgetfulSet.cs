namespace GigRig.Planning;

/// <summary>Texts, of which the oldest are forgotten once all come to more than so many characters. Safe from many threads.</summary>
internal sealed class ForgetfulSet(int mostCharacters)
{
    private readonly Lock gate = new();
    private readonly HashSet<string> known = new(StringComparer.Ordinal);
    private readonly Queue<string> byAge = new();

    public int Characters { get; private set; }

    public bool Contains(string text)
    {
        lock (gate)
            return known.Contains(text);
    }

    public void Add(string text)
    {
        lock (gate)
        {
            if (!known.Add(text))
                return;
            byAge.Enqueue(text);
            Characters += text.Length;
            while (Characters > mostCharacters)
            {
                var oldest = byAge.Dequeue();
                known.Remove(oldest);
                Characters -= oldest.Length;
            }
        }
    }
}
