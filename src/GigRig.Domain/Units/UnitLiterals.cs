namespace GigRig.Domain.Units;

/// <summary>Reads as it is said: <c>60.Mm</c>, <c>100.MilliA</c>, <c>9.V</c>, <c>400.G</c>.</summary>
public static class UnitLiterals
{
    extension(int value)
    {
        public Millimetres Mm => Millimetres.From(value);

        public Milliamps MilliA => Milliamps.From(value);

        /// <summary>Whole volts.</summary>
        public Millivolts V => Millivolts.From(value * 1000);

        public Millivolts MilliV => Millivolts.From(value);

        public Grams G => Grams.From(value);
    }
}
